yes = yes
no = no
